/** A page that stands by itself. `title` and `body` are HTML; `look` is what the body's class says, where it says anything. */
export function htmlPage(title: string, style: string, body: string[], look?: string): string {
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8"/>',
    '<meta name="viewport" content="width=device-width, initial-scale=1"/>',
    `<title>${title}</title>`,
    `<style>${style}</style>`,
    '</head>',
    look === undefined ? '<body>' : `<body class="${look}">`,
    ...body,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}
