/** A flat piece to be cut from film or card, mm. */
export interface Size {
  across: number;
  along: number;
}

/** Where a piece lies: its left far corner, and whether it was turned a quarter. */
export interface Lie {
  x: number;
  y: number;
  turned: boolean;
}

/** A rectangle of film that is still free, or taken. */
export interface Rectangle {
  x: number;
  y: number;
  across: number;
  along: number;
}

export const SAME = 1e-6;

export const holds = (free: Rectangle, { across, along }: Size): boolean =>
  across <= free.across + SAME && along <= free.along + SAME;

export const turnedSize = ({ across, along }: Size): Size => ({ across: along, along: across });

export const areaOf = ({ across, along }: Size): number => across * along;
