import type { PartKind } from "@ferrule/core";
import {
  basisWords,
  clubTypeWords,
  flexWords,
  formWords,
  handWords,
  materialWords,
  suitsWords,
} from "../words/part-words.ts";
import type { FormField } from "./form-field.ts";

/** What the form asks for one kind: what decides most first, each with a reason; the rest behind a disclosure. */
export interface KindForm {
  readonly first: readonly FormField[];
  readonly rest: readonly FormField[];
}

const { either: _either, ...oneHand } = handWords;

const naming: readonly FormField[] = [
  { path: "maker", control: "text" },
  { path: "model", control: "text" },
  { path: "year", control: "year" },
];

const money: readonly FormField[] = [
  { path: "paid", control: "money" },
  { path: "acquiredOn", control: "date" },
  { path: "soldFor", control: "money" },
  { path: "soldOn", control: "date" },
];

const headForm: KindForm = {
  first: [
    {
      path: "clubType",
      control: "choice",
      choices: clubTypeWords,
      why: "Decides which shafts suit it and what it should measure.",
    },
    { path: "hand", control: "choice", choices: oneHand, why: "A head and a handed adapter have to agree." },
    {
      path: "socket.type",
      control: "choice",
      choices: { bore: "A plain bore, glued", receiver: "A seat for a screwed adapter" },
      why: "Decides whether it needs an adapter at all.",
    },
    {
      path: "socket.family",
      control: "text",
      only: "receiver",
      why: "Only an adapter of its own family is sure to go in.",
    },
    {
      path: "socket.diameterIn",
      control: "reading",
      only: "bore",
      why: "The shaft's tip has to enter it: .335, .350, .355 and .370 are usual.",
    },
    {
      path: "socket.form",
      control: "choice",
      choices: formWords,
      only: "bore",
      why: "A taper tip and a parallel bore want work.",
    },
    { path: "massG", control: "reading", why: "The largest part of the swing weight." },
    {
      path: "loftDeg",
      control: "reading",
      why: "Tells one head from the next, and starts the settings table.",
    },
  ],
  rest: [
    { path: "clubNumber", control: "text" },
    ...naming,
    { path: "lieDeg", control: "reading" },
    { path: "faceAngleDeg", control: "reading" },
    { path: "socket.depthIn", control: "reading", only: "bore" },
    { path: "socket.bbgmIn", control: "reading", only: "bore" },
    { path: "socket.throughBore", control: "yes-no", only: "bore" },
    { path: "socket.outsideDiameterIn", control: "reading", only: "bore" },
    { path: "socket.seatToGroundIn", control: "reading", only: "receiver" },
    { path: "volumeCm3", control: "reading" },
    { path: "heelToToeIn", control: "reading" },
    { path: "faceToBackIn", control: "reading" },
    { path: "soleToCrownIn", control: "reading" },
    { path: "neckToSoleIn", control: "reading" },
    { path: "soleRadiusIn", control: "reading" },
    { path: "cgAlongAxisIn", control: "reading" },
    ...money,
  ],
};

const adapterForm: KindForm = {
  first: [
    { path: "family", control: "text", why: "Decides which heads take it." },
    { path: "hand", control: "choice", choices: handWords, why: "Some families are cut for one hand." },
    {
      path: "bore.diameterIn",
      control: "reading",
      why: "The shaft's tip has to enter it: .335 is usual for woods, .370 for hybrids.",
    },
    {
      path: "bore.form",
      control: "choice",
      choices: formWords,
      why: "A taper tip sits loose in a parallel bore.",
    },
    { path: "tipStopFromSeatIn", control: "reading", why: "Decides how long the club comes out." },
  ],
  rest: [
    ...naming,
    { path: "massG", control: "reading" },
    { path: "bore.depthIn", control: "reading" },
    { path: "tiltDeg", control: "reading" },
    { path: "settings", control: "settings" },
    ...money,
  ],
};

const shaftForm: KindForm = {
  first: [
    {
      path: "suits",
      control: "choice",
      choices: suitsWords,
      why: "A wood shaft is too limp for an iron, and an iron shaft too short for a wood.",
    },
    { path: "tip.diameterIn", control: "reading", why: "Has to enter the bore of the head or adapter." },
    {
      path: "tip.form",
      control: "choice",
      choices: formWords,
      why: "A taper tip and a parallel bore want work.",
    },
    {
      path: "length.lengthIn",
      control: "reading",
      why: "Decides the club's length, and which heads it can still serve.",
    },
    {
      path: "length.basis",
      control: "choice",
      choices: basisWords,
      why: "The same shaft reads an inch longer with its adapter on.",
    },
    { path: "flex", control: "choice", choices: flexWords, why: "What the player asks for first." },
    {
      path: "material",
      control: "choice",
      choices: materialWords,
      why: "Steel may be sanded at the tip; graphite must not be.",
    },
    { path: "massG", control: "reading", why: "Moves the swing weight and the total." },
  ],
  rest: [
    ...naming,
    { path: "tip.parallelSectionIn", control: "reading" },
    { path: "tip.trimmedIn", control: "reading" },
    { path: "buttDiameterIn", control: "reading" },
    { path: "rawLengthIn", control: "reading" },
    { path: "rawMassG", control: "reading" },
    { path: "balanceFromTipIn", control: "reading" },
    { path: "frequency.cpm", control: "reading" },
    { path: "frequency.clampIn", control: "reading" },
    { path: "frequency.tipMassG", control: "reading" },
    { path: "frequency.beamLengthIn", control: "reading" },
    { path: "torqueDeg", control: "reading" },
    ...money,
  ],
};

const gripForm: KindForm = {
  first: [
    {
      path: "coreDiameterIn",
      control: "reading",
      why: "Has to suit the shaft's butt: .580 and .600 are usual.",
    },
    { path: "massG", control: "reading", why: "A heavier grip lowers the swing weight." },
    { path: "lengthIn", control: "reading", why: "Tells a putter grip from the rest." },
  ],
  rest: [
    ...naming,
    { path: "outsideDiameterIn", control: "reading" },
    { path: "capThicknessIn", control: "reading" },
    { path: "cgFromCapIn", control: "reading" },
    { path: "ribbed", control: "yes-no" },
    ...money,
  ],
};

const coverForm: KindForm = {
  first: [
    {
      path: "clubType",
      control: "choice",
      choices: clubTypeWords,
      why: "A cover is sold with a club of its type.",
    },
  ],
  rest: [...naming, ...money],
};

const wrenchForm: KindForm = {
  first: [{ path: "family", control: "text", why: "Turns the screws of one family." }],
  rest: [...naming, ...money],
};

export const formFields: Readonly<Record<PartKind, KindForm>> = {
  head: headForm,
  adapter: adapterForm,
  shaft: shaftForm,
  grip: gripForm,
  cover: coverForm,
  wrench: wrenchForm,
};
