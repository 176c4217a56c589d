/**
 * Runs a piece of work once the browser has shown what stands now: for what can come a moment later, so that a press is
 * answered at once on a slow phone.
 */
export function afterPaint(work: () => void): void {
  requestAnimationFrame(() => setTimeout(work));
}
