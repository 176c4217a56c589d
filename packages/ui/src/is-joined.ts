import type { Joint, JointType } from "@ferrule/core";

/** Whether a joint of this type holds the part on the bench now. */
export function isJoined(joints: readonly Joint[], part: string, type: JointType): boolean {
  return joints.some((joint) => joint.type === type && joint.parts.includes(part));
}
