import { degFromRad, radFromDeg } from "../../units.ts";

/**
 * A head and the tilt of the shaft in it. The rotation is counted from the setting that stands the shaft most upright, in the
 * sense that closes the face at 90°; so counted, a left-handed head is the mirror image and needs no sign of its own.
 */
export interface TiltedHead {
  readonly loftDeg: number;
  readonly lieDeg: number;
  /** Of the head without tilt, soled: closed is positive. */
  readonly faceAngleDeg: number;
  readonly tiltDeg: number;
  readonly rotationDeg: number;
}

export interface AdapterAngles {
  /** The head sits on the ground as it was designed to. */
  readonly soled: {
    readonly loftDeg: number;
    readonly lieDeg: number;
    readonly faceAngleDeg: number;
  };
  /** The player turns the grip until the face is square, and the sole leaves the ground a little. */
  readonly squared: { readonly loftDeg: number; readonly lieDeg: number };
}

/**
 * Loft, lie and face angle of a head whose shaft is tilted by an adapter. Axes for a right-handed player: x to the target, y to
 * the player, z up. The bore's axis is h = (0, cosΛ, sinΛ); tilted by α towards ψ it is
 *     s = cosα h + sinα (cosψ (0, −sinΛ, cosΛ) + sinψ (1, 0, 0)),
 * and the face looks along n = (cosℓ cosφ, cosℓ sinφ, sinℓ). Soled, the head stays and only the shaft moves: lie = asin(s_z),
 * and the face closes by atan2(s_x, s_y), the turn about the vertical that brings the shaft back across the target line.
 * Squared, n·s is kept because head and shaft are one body, and a square face has n·s = sin(loft) sin(lie).
 * Derived from vectors, no published source; a designer's report (adjustable-hosel report) and the Hireko blog of February 2009
 * say the same of the soled and of the squared club in words.
 */
export function adapterAngles(head: TiltedHead): AdapterAngles {
  const loftRad = radFromDeg(head.loftDeg);
  const lieRad = radFromDeg(head.lieDeg);
  const faceRad = radFromDeg(head.faceAngleDeg);
  const tiltRad = radFromDeg(head.tiltDeg);
  const rotationRad = radFromDeg(head.rotationDeg);

  const upright = Math.sin(tiltRad) * Math.cos(rotationRad);
  const sx = Math.sin(tiltRad) * Math.sin(rotationRad);
  const sy = Math.cos(tiltRad) * Math.cos(lieRad) - upright * Math.sin(lieRad);
  const sz = Math.cos(tiltRad) * Math.sin(lieRad) + upright * Math.cos(lieRad);
  const faceAlongShaft =
    Math.cos(loftRad) * (Math.cos(faceRad) * sx + Math.sin(faceRad) * sy) + Math.sin(loftRad) * sz;

  const lieDeg = degFromRad(Math.asin(sz));
  return {
    soled: {
      loftDeg: head.loftDeg,
      lieDeg,
      faceAngleDeg: head.faceAngleDeg + degFromRad(Math.atan2(sx, sy)),
    },
    squared: { loftDeg: degFromRad(Math.asin(faceAlongShaft / sz)), lieDeg },
  };
}
