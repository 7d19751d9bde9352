/** The engine as one script, packed by `deflate-raw` and written in base64 (see `vite.page.config.ts`). */
declare module 'virtual:engine' {
  const packed: string;
  export default packed;
}
