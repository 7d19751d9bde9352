/** The faces of this page by their weight, each as a `data:` address, as its style sheet has them. The engine writes with the same, so they are in the file once. */
export function lettersHere(): Record<string, string> {
  const found: Record<string, string> = {};
  for (const sheet of document.styleSheets)
    for (const rule of sheet.cssRules) {
      if (!(rule instanceof CSSFontFaceRule)) continue;
      const address = /data:[^"')]+/.exec(rule.style.getPropertyValue('src'))?.[0];
      if (address) found[rule.style.getPropertyValue('font-weight')] = address;
    }
  return found;
}
