/** paper types its core build only under a name without the extension. */
declare module 'paper/dist/paper-core.js' {
  import type core from 'paper/dist/paper-core';

  const scope: typeof core;
  export default scope;
}
