/** The colour that each part of the field takes in exchange. */
export const EXCHANGED: Record<string, string> = { field: 'alternate', alternate: 'field' };
