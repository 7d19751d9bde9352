/** The colours of the bench that lines are drawn in, as the page has them now. */
export interface Inks {
  card: string;
  kraft: string;
  ink: string;
  soft: string;
  chalk: string;
  oxide: string;
  focus: string;
}

export function inksOf(element: Element): Inks {
  const style = getComputedStyle(element);
  const of = (name: string): string => style.getPropertyValue(`--${name}`).trim();
  return {
    card: of('card'),
    kraft: of('kraft'),
    ink: of('ink'),
    soft: of('soft'),
    chalk: of('chalk'),
    oxide: of('oxide'),
    focus: of('focus'),
  };
}
