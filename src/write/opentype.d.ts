declare module 'opentype.js/dist/opentype.mjs' {
  export * from 'opentype.js';
}
