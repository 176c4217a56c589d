import type { Adapter, Head, Shaft, WorkStep } from "@ferrule/core";
import { writtenValue } from "./written-value.ts";

/** What is known of a tip and the bore that it goes into, in inches; what nobody has said is not there. */
export interface JointFacts {
  readonly holder: "bore" | "adapter" | "none";
  readonly tipIn?: number;
  readonly tipForm?: "parallel" | "taper";
  /** How far up from its end the tip is still of one diameter. */
  readonly parallelIn?: number;
  readonly boreIn?: number;
  readonly boreForm?: "parallel" | "taper";
  readonly depthIn?: number;
  readonly outsideIn?: number;
  readonly isThrough: boolean;
  /** How far below the seat an adapter stops the tip. */
  readonly stopIn?: number;
  /** What the work makes of it. */
  readonly sleeveWallIn?: number;
  readonly reamedToIn?: number;
  readonly sandedIn?: number;
}

/** Reads a joint off its parts and the work that is to be done. */
export function jointFacts(
  { head, adapter, shaft }: { head: Head; adapter?: Adapter | undefined; shaft: Shaft },
  work: readonly WorkStep[] = [],
): JointFacts {
  const data = (step: string, field: string) => {
    const value = work.find((one) => one.step === step)?.data[field];
    return typeof value === "number" ? value : undefined;
  };
  return {
    ...holderFacts(head, adapter),
    tipIn: writtenValue(shaft.tip?.diameterIn),
    tipForm: shaft.tip?.form,
    parallelIn: writtenValue(shaft.tip?.parallelSectionIn),
    sleeveWallIn: data("shim", "wallIn") ?? data("rolled-sleeve", "wallIn"),
    reamedToIn: data("ream-bore", "toIn"),
    sandedIn: data("sand-steel-tip", "overIn"),
  };
}

function holderFacts(
  { socket }: Head,
  adapter: Adapter | undefined,
): Pick<JointFacts, "holder" | "boreIn" | "boreForm" | "depthIn" | "outsideIn" | "isThrough" | "stopIn"> {
  if (adapter)
    return {
      holder: "adapter",
      boreIn: writtenValue(adapter.bore?.diameterIn),
      boreForm: adapter.bore?.form,
      depthIn: writtenValue(adapter.bore?.depthIn),
      stopIn: writtenValue(adapter.tipStopFromSeatIn),
      isThrough: false,
    };
  if (socket?.type !== "bore") return { holder: "none", isThrough: false };
  return {
    holder: "bore",
    boreIn: writtenValue(socket.diameterIn),
    boreForm: socket.form,
    depthIn: writtenValue(socket.depthIn),
    outsideIn: writtenValue(socket.outsideDiameterIn),
    isThrough: socket.throughBore === true,
  };
}
