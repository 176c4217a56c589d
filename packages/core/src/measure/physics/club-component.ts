/** Something with mass on a club, as a point along the shaft axis and what it has of inertia about its own centre. */
export interface ClubComponent {
  readonly massG: number;
  /** From the grip end, along the shaft axis. */
  readonly cgFromButtIn: number;
  /** About its own centre of mass, across the shaft axis; 0 for a point. */
  readonly ownMoiGIn2: number;
}
