/** What each field of a part is called on the page. */
export const fieldWords: Readonly<Record<string, string>> = {
  id: "Name on the bench",
  kind: "Kind",
  maker: "Maker",
  model: "Model",
  year: "Year",
  faults: "Faults",
  deniedFaults: "Looked for and not there",
  note: "Note",
  paid: "Paid",
  acquiredOn: "Bought on",
  soldFor: "Sold for",
  soldOn: "Sold on",
  clubType: "Club type",
  clubNumber: "Number",
  hand: "Hand",
  loftDeg: "Loft",
  lieDeg: "Lie",
  faceAngleDeg: "Face angle",
  massG: "Mass",
  volumeCm3: "Volume",
  heelToToeIn: "Heel to toe",
  faceToBackIn: "Face to back",
  soleToCrownIn: "Sole to crown",
  neckToSoleIn: "Neck to sole",
  soleRadiusIn: "Sole radius",
  cgAlongAxisIn: "Balance height of the head",
  "socket.type": "How it takes a shaft",
  "socket.diameterIn": "Bore",
  "socket.form": "Form of the bore",
  "socket.depthIn": "Depth of the bore",
  "socket.bbgmIn": "Bottom of bore to ground",
  "socket.throughBore": "Bored right through",
  "socket.outsideDiameterIn": "Outside of the hosel",
  "socket.family": "Adapter family",
  "socket.seatToGroundIn": "Seat to ground",
  family: "Family",
  "bore.diameterIn": "Bore",
  "bore.form": "Form of the bore",
  "bore.depthIn": "Depth of the bore",
  tipStopFromSeatIn: "Tip stop below the seat",
  tiltDeg: "Tilt",
  settings: "Settings",
  suits: "Made for",
  material: "Material",
  flex: "Flex",
  "length.lengthIn": "Length",
  "length.basis": "How the length was taken",
  rawLengthIn: "Length when new",
  rawMassG: "Mass when new",
  "tip.diameterIn": "Tip",
  "tip.form": "Form of the tip",
  "tip.parallelSectionIn": "Parallel section left",
  "tip.trimmedIn": "Cut from the tip already",
  buttDiameterIn: "Butt",
  balanceFromTipIn: "Balance point from the tip",
  "frequency.cpm": "Frequency",
  "frequency.clampIn": "Clamped length",
  "frequency.tipMassG": "Tip mass on the rig",
  "frequency.beamLengthIn": "Free length on the rig",
  torqueDeg: "Torque",
  coreDiameterIn: "Core",
  lengthIn: "Length",
  outsideDiameterIn: "Widest outside",
  capThicknessIn: "Cap thickness",
  cgFromCapIn: "Balance point from the cap",
  ribbed: "Ribbed",
  skill: "Skill allowed",
  localRule46: "46 in local rule",
  tapeMassG: "Grip tape",
  epoxyMassG: "Epoxy",
  ferruleMassG: "Ferrule",
  contactFromAxisIn: "Where the sole touches the ground",
  playingLengthIn: "Playing length",
  swingWeightPoints: "Swing weight",
};

/** The page's name of a field; one without a name of ours is spelled out from its own. */
export function fieldText(field: string): string {
  return (
    fieldWords[field] ??
    fieldWords[field.replace(/^(?:head|adapter|shaft|grip|goal)\./, "")] ??
    spacedText(field)
  );
}

/** "extraHeadMassG" is "Extra head mass". */
function spacedText(field: string): string {
  const bare = (field.split(".").at(-1) ?? field).replace(/(?:In|G|Deg|Cm3|KgCm2|Points)$/, "");
  const words = bare.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();
  return words.charAt(0).toUpperCase() + words.slice(1);
}
