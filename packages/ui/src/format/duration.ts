/** "40 min", "1 h 20 min", "24 h". */
export function minutesText(minutes: number): string {
  const whole = Math.round(minutes);
  if (whole < 60) return `${whole} min`;
  const rest = whole % 60;
  return rest === 0 ? `${Math.floor(whole / 60)} h` : `${Math.floor(whole / 60)} h ${rest} min`;
}

/** A share of a whole: "62 %". */
export function shareText(share: number): string {
  return `${Math.round(share * 100)} %`;
}
