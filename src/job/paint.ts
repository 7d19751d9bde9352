/** How paint is put on. */
export const TOOLS = ['brush', 'roller', 'foam'] as const;
export type Tool = (typeof TOOLS)[number];

/** What a job says of one paint; what it leaves open is taken from what it says of all, and else is usual. */
export interface Coating {
  coats?: number;
  /** mm² from one ml. */
  covers?: number;
  tool?: Tool;
  tins?: { size: number; price: number }[];
}

/** What a job says of its paint. Volumes in ml, times in hours, areas in mm². */
export interface PaintWishes extends Coating {
  /** ml of each colour, of `primer` and of `clear` at hand. */
  onHand: Record<string, number>;
  /** Kept back for touching up, as a share of what is used. */
  reserve: number;
  /** What differs for the ground, and for each colour by name. */
  ground?: Coating;
  colours: Record<string, Coating>;
  primer?: Coating;
  clear?: Coating;
  time: { recoat?: number; placement?: number; day?: number; walk?: number };
}
