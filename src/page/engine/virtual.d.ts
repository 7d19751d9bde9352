/** The engine as two scripts, each packed by `deflate-raw` and written in base64 (see `vite.page.config.ts`). */
declare module 'virtual:engine' {
  /** The worker, with all it takes to look at most jobs. */
  export const first: string;
  /** What the first asks for by `fetchRest` when it comes to it. */
  export const rest: string;
}
