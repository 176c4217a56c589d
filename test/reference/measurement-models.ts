/** The models of the published examples and of the club, by the name a row gives them; values come in the row's order. */
export const measurementModels: Readonly<Record<string, (values: readonly number[]) => number>> = {
  /** JCGM 100:2008, H.1. */
  "end-gauge": ([
    ls = 0,
    d0 = 0,
    d1 = 0,
    d2 = 0,
    dAlpha = 0,
    thetaBar = 0,
    delta = 0,
    alphaS = 0,
    dTheta = 0,
  ]) => ls + d0 + d1 + d2 - ls * (dAlpha * (thetaBar + delta) + alphaS * dTheta),
  /** NIST TN 1900, example E13. */
  "thermal-expansion": ([l0 = 0, t0 = 0, l1 = 0, t1 = 0]) => (l1 - l0) / (l0 * (t1 - t0)),
  "stefan-boltzmann": ([h = 0, r = 0, rInf = 0, e = 0, alpha = 0]) =>
    (32 * Math.PI ** 5 * h * r ** 4 * rInf ** 4) / (15 * e ** 4 * 0.001 ** 4 * 299792458 ** 6 * alpha ** 8),
  "x-ray": ([x1 = 0, x2 = 0, yu = 0]) => (x1 / x2) * yu,
  logarithm: ([x = 0]) => Math.log(x),
  sum: (values) => values.reduce((sum, x) => sum + x, 0),
};
