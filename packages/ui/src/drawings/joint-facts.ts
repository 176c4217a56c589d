import type { Adapter, Head, Shaft, WorkStep } from "@ferrule/core";

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
  readonly hasBeads: boolean;
}

type Written = number | { readonly value: number } | undefined;
const valueFrom = (written: Written) => (typeof written === "object" ? written.value : written);

/** Reads a joint off its parts and the work that is to be done; `depthIn` stands in where no depth was written down. */
export function jointFacts(
  { head, adapter, shaft }: { head: Head; adapter?: Adapter | undefined; shaft: Shaft },
  work: readonly WorkStep[] = [],
  depthIn?: number | null,
): JointFacts {
  const data = (step: string, field: string) => {
    const value = work.find((one) => one.step === step)?.data[field];
    return typeof value === "number" ? value : undefined;
  };
  return {
    ...holderFacts(head, adapter),
    ...(depthIn !== undefined && depthIn !== null && { depthIn }),
    tipIn: valueFrom(shaft.tip?.diameterIn),
    tipForm: shaft.tip?.form,
    parallelIn: valueFrom(shaft.tip?.parallelSectionIn),
    sleeveWallIn: data("shim", "wallIn") ?? data("rolled-sleeve", "wallIn"),
    reamedToIn: data("ream-bore", "toIn"),
    sandedIn: data("sand-steel-tip", "overIn"),
    hasBeads: work.some(({ step }) => step === "glass-beads"),
  };
}

function holderFacts(
  { socket }: Head,
  adapter: Adapter | undefined,
): Pick<JointFacts, "holder" | "boreIn" | "boreForm" | "depthIn" | "outsideIn" | "isThrough" | "stopIn"> {
  if (adapter)
    return {
      holder: "adapter",
      boreIn: valueFrom(adapter.bore?.diameterIn),
      boreForm: adapter.bore?.form,
      depthIn: valueFrom(adapter.bore?.depthIn),
      stopIn: valueFrom(adapter.tipStopFromSeatIn),
      isThrough: false,
    };
  if (socket?.type !== "bore") return { holder: "none", isThrough: false };
  return {
    holder: "bore",
    boreIn: valueFrom(socket.diameterIn),
    boreForm: socket.form,
    depthIn: valueFrom(socket.depthIn),
    outsideIn: valueFrom(socket.outsideDiameterIn),
    isThrough: socket.throughBore === true,
  };
}
