import { adapterAngles } from "../../packages/core/src/measure/physics/adapter-angles.ts";
import {
  addressTriangle,
  lieKeepingHandHeight,
} from "../../packages/core/src/measure/physics/address-triangle.ts";
import {
  bondArea,
  bondCapacity,
  bondShear,
  swingPull,
} from "../../packages/core/src/measure/physics/bond-shear.ts";
import { cantileverFrequency, cantileverRoot } from "../../packages/core/src/measure/physics/cantilever.ts";
import {
  carriedFrequency,
  type LoadedShaft,
} from "../../packages/core/src/measure/physics/carried-frequency.ts";
import { clubBalance, clubFirstMoment } from "../../packages/core/src/measure/physics/club-balance.ts";
import { clubMass } from "../../packages/core/src/measure/physics/club-mass.ts";
import { clubMoi, rodOwnMoi } from "../../packages/core/src/measure/physics/club-moi.ts";
import { lieAim } from "../../packages/core/src/measure/physics/lie-aim.ts";
import {
  bottomOfBoreToGround,
  cutLength,
  playingLength,
} from "../../packages/core/src/measure/physics/playing-length.ts";
import { rulesLength } from "../../packages/core/src/measure/physics/rules-length.ts";
import { shaftAfterTrim } from "../../packages/core/src/measure/physics/shaft-after-trim.ts";
import { shimWall } from "../../packages/core/src/measure/physics/shim-wall.ts";
import {
  momentAboutFulcrum,
  momentAtPoints,
  swingWeight,
  swingWeightFulcrumIn,
  swingWeightPoints,
} from "../../packages/core/src/measure/physics/swing-weight.ts";
import {
  arcsineUncertainty,
  curvilinearTrapezoidUncertainty,
  effectiveDegreesOfFreedom,
  propagate,
  propagateMany,
  rectangularUncertainty,
  resolutionUncertainty,
  typeAJoint,
} from "../../packages/core/src/measure/uncertainty.ts";
import {
  gInFromOzIn,
  gravityMps2,
  inFromMm,
  kgFromG,
  lbfFromN,
  mpsFromMph,
  ozInFromGIn,
  paFromPsi,
} from "../../packages/core/src/units.ts";
import { measurementModels } from "./measurement-models.ts";
import { type Distribution, drawModel } from "./monte-carlo.ts";
import type { Answer, Given } from "./reference-rows.ts";

/** A row's `given`, believed: a field that is missing turns into NaN and the row fails. */
type Numbers = Record<string, number>;

/** How each `of` is computed by the code under test; nothing here knows an answer. */
export const physicsCalculators: Readonly<Record<string, (given: never) => Answer>> = {
  counterForce: (given: { massG: number; balanceFromButtMm: number; fulcrumMm: number }) => {
    const fulcrumIn = inFromMm(given.fulcrumMm);
    const balanceFromButtIn = inFromMm(given.balanceFromButtMm);
    const momentGIn = momentAboutFulcrum({ massG: given.massG, balanceFromButtIn, fulcrumIn });
    return { counterForceN: (kgFromG(momentGIn) * gravityMps2) / fulcrumIn };
  },
  swingWeight: (given: { massG: number; balanceFromButtMm: number }) => {
    const { momentOzIn, points, label } = swingWeight({
      massG: given.massG,
      balanceFromButtIn: inFromMm(given.balanceFromButtMm),
    });
    return { momentOzIn, points, label };
  },
  pointSize: () => ({ momentGIn: gInFromOzIn(momentAtPoints(1) - momentAtPoints(0)) }),
  momentOnOfficialScale: (given: { points: number; massOz: number }) => ({
    momentOzIn: momentAtPoints(given.points) + (swingWeightFulcrumIn - 12) * given.massOz,
  }),
  massForOnePoint: (given: { cgFromButtIn: number }) => ({ massG: 1 / pointsAdded({ ...given, massG: 1 }) }),
  pointsOfAddedMass: (given: { massG: number; cgFromButtIn: number }) => ({ points: pointsAdded(given) }),
  pointsOfLength: (given: { headMassG: number; shaftMassG: number; longerIn: number }) => {
    const massG = given.headMassG + given.shaftMassG;
    const at = (balanceFromButtIn: number) => swingWeight({ massG, balanceFromButtIn }).points;
    return { points: at(36 + given.longerIn) - at(36) };
  },
  club: (given: { components: Numbers[]; axisFromButtIn?: number }) => {
    const components = given.components.map(
      ({ massG = Number.NaN, cgFromButtIn = Number.NaN, rodLengthIn = 0 }) => ({
        massG,
        cgFromButtIn,
        ownMoiGIn2: rodOwnMoi({ massG, lengthIn: rodLengthIn }),
      }),
    );
    const massG = clubMass(components);
    const balanceFromButtIn = clubBalance(components);
    const { points, label } = swingWeight({ massG, balanceFromButtIn });
    const moiKgCm2 = clubMoi(components, given.axisFromButtIn);
    return { massG, firstMomentGIn: clubFirstMoment(components), balanceFromButtIn, points, label, moiKgCm2 };
  },
  bottomOfBoreToGround: (given: { hoselLengthIn: number; insertionIn: number }) => ({
    bbgmIn: bottomOfBoreToGround(given),
  }),
  lengthAfterHeadSwap: (given: { bbgmIn: number; newBbgmIn: number }) => {
    const shaft = { cutLengthIn: 44, capThicknessIn: 0.125 };
    const before = playingLength({ ...shaft, bbgmIn: given.bbgmIn });
    return { longerIn: playingLength({ ...shaft, bbgmIn: given.newBbgmIn }) - before };
  },
  playingLength: (given: { cutLengthIn: number; bbgmIn: number; capThicknessIn: number }) => ({
    playingLengthIn: playingLength(given),
  }),
  cutLength: (given: { playingLengthIn: number; bbgmIn: number; capThicknessIn: number }) => ({
    cutLengthIn: cutLength(given),
  }),
  addressTriangle: (given: { lengthIn: number; lieDeg: number }) => ({ ...addressTriangle(given) }),
  lieKeepingHandHeight: (given: { lengthIn: number; lieDeg: number; newLengthIn: number }) => ({
    lieDeg: lieKeepingHandHeight(given),
  }),
  rulesLengthDifference: (given: { lieDeg: number; soleRadiusIn: number; contactFromAxisIn: number }) => ({
    absoluteIn: Math.abs(rulesLength({ ...given, playingLengthIn: 45 }) - 45),
  }),
  shaftAfterTrim: (given: Parameters<typeof shaftAfterTrim>[0]): Answer => {
    const left = shaftAfterTrim(given);
    if (!left.ok) return { refused: left.code };
    const { massG, lengthIn, balanceFromTipIn, moiAboutTipGIn2 } = left;
    return { massG, lengthIn, balanceFromTipIn, moiAboutTipGIn2 };
  },
  endDensity: (given: Parameters<typeof shaftAfterTrim>[0]): Answer => {
    const left = shaftAfterTrim(given);
    return left.ok ? { densityGPerIn: left.massG / left.lengthIn } : { refused: left.code };
  },
  cantileverRoot: (given: { massRatio: number; mode: number }) => ({ root: cantileverRoot(given) }),
  rayleighExcess: ({ massRatio }: { massRatio: number }) => ({
    excessPct: (Math.sqrt(3 / (massRatio + 33 / 140)) / cantileverRoot({ massRatio }) ** 2 - 1) * 100,
  }),
  masslessExcess: ({ massRatio }: { massRatio: number }) => {
    const beam = { rigidityNM2: 30, beamLengthM: 1, tipMassKg: massRatio * 0.05 };
    const massless = cantileverFrequency({ ...beam, beamMassKg: 0 }).cpm;
    return { excessPct: (massless / cantileverFrequency({ ...beam, beamMassKg: 0.05 }).cpm - 1) * 100 };
  },
  cantileverFrequency: (given: {
    youngPa: number;
    densityKgM3: number;
    areaM2: number;
    secondMomentM4: number;
    beamLengthM: number;
    tipMassKg: number;
    mode: number;
  }) => {
    const { angularRadPerS, cpm } = cantileverFrequency({
      rigidityNM2: given.youngPa * given.secondMomentM4,
      beamMassKg: given.densityKgM3 * given.areaM2 * given.beamLengthM,
      beamLengthM: given.beamLengthM,
      tipMassKg: given.tipMassKg,
      mode: given.mode,
    });
    return { angularRadPerS, frequencyHz: cpm / 60 };
  },
  shaftFrequency: (given: Parameters<typeof cantileverFrequency>[0]) => ({
    cpm: cantileverFrequency(given).cpm,
  }),
  carriedFrequency: (given: Carried) => ({ ...carriedFrequency(given) }),
  frequencySlope: ({ reading, target }: Carried) => {
    const at = (tipMassG: number) => carriedFrequency({ reading, target: { ...target, tipMassG } }).cpm;
    return { slopeCpmPerG: at(target.tipMassG + 0.5) - at(target.tipMassG - 0.5) };
  },
  adapterAngles: (given: Parameters<typeof adapterAngles>[0]) => {
    const { soled, squared } = adapterAngles(given);
    return {
      soledLoftDeg: soled.loftDeg,
      soledLieDeg: soled.lieDeg,
      soledFaceAngleDeg: soled.faceAngleDeg,
      squaredLoftDeg: squared.loftDeg,
    };
  },
  lieAim: (given: { loftDeg: number; lieErrorDeg: number }) => ({ aimDeg: lieAim(given) }),
  swingPull: (given: { massG: number; speedMps?: number; speedMph?: number; radiusM: number }) => {
    const pullN = swingPull({
      ...given,
      speedMps: given.speedMps ?? mpsFromMph(given.speedMph ?? Number.NaN),
    });
    return { pullN, pullLbf: lbfFromN(pullN) };
  },
  bond: (given: { tipDiameterIn: number; insertionIn: number; pullN?: number; strengthPsi?: number }) => {
    const { shearPa, shearPsi } = bondShear({ ...given, pullN: given.pullN ?? Number.NaN });
    const strengthPa = paFromPsi(given.strengthPsi ?? Number.NaN);
    const capacityN = bondCapacity({ ...given, strengthPa });
    return {
      areaMm2: bondArea(given) * 1e6,
      shearMPa: shearPa / 1e6,
      shearPsi,
      margin: strengthPa / shearPa,
      capacityLbf: lbfFromN(capacityN),
      capacityKN: capacityN / 1000,
    };
  },
  stress: ({ stressPsi }: { stressPsi: number }) => ({ stressMPa: paFromPsi(stressPsi) / 1e6 }),
  shimWall: (given: { tipDiameterIn: number; boreDiameterIn: number }) => ({ wallIn: shimWall(given) }),
  rectangularUncertainty: (given: { halfWidth: number }) => ({
    standardUncertainty: rectangularUncertainty(given.halfWidth),
  }),
  resolutionUncertainty: (given: { step: number }) => ({
    standardUncertainty: resolutionUncertainty(given.step),
  }),
  arcsineUncertainty: (given: { halfWidth: number }) => ({
    standardUncertainty: arcsineUncertainty(given.halfWidth),
  }),
  curvilinearTrapezoidUncertainty: (given: { halfWidth: number; limitSlack: number }) => ({
    variance: curvilinearTrapezoidUncertainty(given) ** 2,
  }),
  propagate: (given: { model: string; inputs: [string, number, number][] }) => {
    const names = given.inputs.map(([name]) => name);
    const model = modelNamed(given.model);
    const inputs = given.inputs.map(([name, value, standardUncertainty]) => ({
      name,
      value,
      standardUncertainty,
    }));
    const { value, standardUncertainty, contributions } = propagate(
      (at) => model(names.map((name) => at[name] ?? Number.NaN)),
      inputs,
    );
    const components = contributions.map(({ name, share }) => [
      `component.${name}`,
      Math.sqrt(share) * standardUncertainty,
    ]);
    return { value, standardUncertainty, ...Object.fromEntries(components) };
  },
  combined: (given: { components: [number, number | null][] }) => {
    const components = given.components.map(([standardUncertainty, degreesOfFreedom]) => ({
      standardUncertainty,
      degreesOfFreedom: degreesOfFreedom ?? Number.POSITIVE_INFINITY,
    }));
    return {
      standardUncertainty: Math.hypot(...components.map((component) => component.standardUncertainty)),
      degreesOfFreedom: effectiveDegreesOfFreedom(components),
    };
  },
  impedance: (given: { series: number[][]; independent?: boolean }) => {
    const { means, covarianceOfMeans, correlation } = typeAJoint(given.series);
    const names = ["v", "i", "phi"] as const;
    const inputs = names.map((name, k) => ({
      name,
      value: means[k] ?? Number.NaN,
      standardUncertainty: Math.sqrt(covarianceOfMeans[k]?.[k] ?? Number.NaN),
    }));
    const r = (k: number, l: number, matrix = correlation) => matrix[k]?.[l] ?? Number.NaN;
    const correlations = [
      { a: "v", b: "i", r: r(0, 1) },
      { a: "v", b: "phi", r: r(0, 2) },
      { a: "i", b: "phi", r: r(1, 2) },
    ] as const;
    const out = propagateMany(
      ({ v, i, phi }) => [(v / i) * Math.cos(phi), (v / i) * Math.sin(phi), v / i],
      inputs,
      given.independent === true ? [] : correlations,
    );
    const [resistance = Number.NaN, reactance = Number.NaN, impedance = Number.NaN] = out.values;
    const [uR = Number.NaN, uX = Number.NaN, uZ = Number.NaN] = out.standardUncertainties;
    return {
      ...{ r: resistance, x: reactance, z: impedance, uR, uX, uZ },
      ...{ rVI: r(0, 1), rVPhi: r(0, 2), rIPhi: r(1, 2) },
      ...{ rRX: r(0, 1, out.correlation), rRZ: r(0, 2, out.correlation), rXZ: r(1, 2, out.correlation) },
    };
  },
  polar: (given: { re: number; im: number; standardUncertainty: number }) => {
    const inputs = (["re", "im"] as const).map((name) => ({
      name,
      value: given[name],
      standardUncertainty: given.standardUncertainty,
    }));
    const { standardUncertainties } = propagateMany(
      ({ re, im }) => [Math.hypot(re, im), Math.atan2(im, re)],
      inputs,
    );
    const [uMagnitude = Number.NaN, uPhase = Number.NaN] = standardUncertainties;
    return { uMagnitude, uPhase };
  },
  monteCarlo: (given: { model: string; distributions: Distribution[] }) => ({
    ...drawModel(modelNamed(given.model), given.distributions),
  }),
};

interface Carried {
  reading: LoadedShaft & { cpm: number };
  target: LoadedShaft;
}

const clubModels: Readonly<Record<string, (values: readonly number[]) => number>> = {
  "moment-about-fulcrum": ([massG = 0, balanceFromButtIn = 0]) =>
    momentAboutFulcrum({ massG, balanceFromButtIn, fulcrumIn: swingWeightFulcrumIn }),
  points: ([massG = 0, balanceFromButtIn = 0]) => swingWeight({ massG, balanceFromButtIn }).points,
};

function modelNamed(name: string): (values: readonly number[]) => number {
  const model = measurementModels[name] ?? clubModels[name];
  if (model === undefined) throw new Error(`no model is named ${name}`);
  return model;
}

function pointsAdded({ massG, cgFromButtIn }: { massG: number; cgFromButtIn: number }): number {
  const momentGIn = massG * (cgFromButtIn - swingWeightFulcrumIn);
  return swingWeightPoints(ozInFromGIn(momentGIn)) - swingWeightPoints(0);
}

/** What the code under test gives for a row. Throws when a row names a calculator that does not exist. */
export function computeRow(of: string, given: Given): Answer {
  const calculate = physicsCalculators[of];
  if (calculate === undefined) throw new Error(`no calculator is named ${of}`);
  return calculate(given as never);
}
