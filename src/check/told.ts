/** One statement about the written files, what was measured of it, and what is allowed. Lengths in mm. */
export interface Claim {
  claim: string;
  holds: boolean;
  measured: string | number;
  allowed: string | number;
  file: string;
}

export interface Claims {
  /** True when every claim holds. */
  holds: boolean;
  claims: Claim[];
}
