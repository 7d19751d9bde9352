import type { RefCallback } from 'preact';
import { useCallback, useRef } from 'preact/hooks';

const CONTROLS = 'input, select, textarea, button, summary';
const SIDES: Record<string, number> = { ArrowLeft: -1, ArrowRight: 1 };
const ROWS: Record<string, number> = { ArrowUp: -1, ArrowDown: 1 };

type Control = HTMLInputElement | HTMLSelectElement | HTMLButtonElement;

const isRadio = (one: Control): boolean => one.type === 'radio';
/** Arrows to the side move in what is typed. */
const isTyped = (one: Control): boolean => one.type === 'text' || one.type === 'textarea';
const isOneStop = (one: Control, next: Control): boolean =>
  !isTyped(one) && isRadio(one) === isRadio(next) && !isTyped(next);

/** The stops of a row: what is typed in is one by itself; radio buttons side by side are one together, and so are other buttons. */
function stopsOf(row: HTMLElement): Control[][] {
  const stops: Control[][] = [];
  for (const one of row.querySelectorAll<Control>(CONTROLS)) {
    if (one.disabled || one.hidden) continue;
    const last = stops.at(-1);
    if (last && isOneStop(last[0]!, one)) last.push(one);
    else stops.push([one]);
  }
  return stops;
}

function go(to: Control): void {
  to.focus();
  if (to instanceof HTMLInputElement && isTyped(to)) to.select();
}

/** Watches over a group until the answer is called. */
function keep(group: HTMLElement, rows: string): () => void {
  let last: Element | undefined;
  let at = 0;
  const rowsOf = (): HTMLElement[] =>
    (rows === '' ? [group] : [...group.querySelectorAll<HTMLElement>(rows)]).filter((row) => stopsOf(row).length > 0);

  const settle = (): void => {
    const all = rowsOf();
    const held = all.findIndex((row) => last !== undefined && row.contains(last));
    at = held >= 0 ? held : Math.min(at, Math.max(0, all.length - 1));
    for (const [n, row] of all.entries())
      for (const stop of stopsOf(row)) {
        const first = stop.find((one) => one === last) ?? stop[0];
        for (const one of stop) one.tabIndex = n === at && (one === first || isRadio(one)) ? 0 : -1;
      }
  };
  const come = ({ target }: FocusEvent): void => {
    last = target as Element;
    settle();
  };

  const toRow = (stops: Control[][], stop: number, by: number): void => {
    const next = rowsOf()[at + by];
    if (!next) return;
    const there = stopsOf(next);
    const column = there[Math.min(stop, there.length - 1)]!;
    const place = stops[stop]!.indexOf(last as Control);
    go(
      column.find((one) => one instanceof HTMLInputElement && one.checked) ??
        column[Math.min(place, column.length - 1)]!,
    );
  };
  const press = (event: KeyboardEvent): void => {
    const now = event.target as Control;
    const [side, by] = [SIDES[event.key], ROWS[event.key]];
    if ((!side && !by) || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const row = rowsOf()[at];
    const stops = row ? stopsOf(row) : [];
    const stop = stops.findIndex((one) => one.includes(now));
    if (stop < 0) return;
    // A line that opens keeps up and down; radio buttons keep left and right.
    if (by && rows !== '' && now.tagName !== 'SELECT') toRow(stops, stop, by);
    else if (side && !isTyped(now) && !isRadio(now)) {
      const next = stops[stop]![stops[stop]!.indexOf(now) + side];
      if (next) go(next);
    } else return;
    event.preventDefault();
  };

  const watch = new MutationObserver(settle);
  watch.observe(group, { childList: true, subtree: true, attributes: true, attributeFilter: ['disabled'] });
  group.addEventListener('focusin', come);
  group.addEventListener('keydown', press);
  settle();
  return () => {
    watch.disconnect();
    group.removeEventListener('focusin', come);
    group.removeEventListener('keydown', press);
  };
}

/**
 * Few stops of the tab key for many controls of a like kind, by roving tabindex (WAI-ARIA Authoring Practices, “Developing a Keyboard Interface”): one row is
 * in the tab order, up and down go to the same place of another, left and right go along the buttons of one stop.
 * @param rows selector of the rows in the group; with none the group is one row
 */
export function useStops(rows = ''): RefCallback<HTMLElement> {
  const end = useRef<(() => void) | undefined>(undefined);
  return useCallback(
    (group: HTMLElement | null) => {
      end.current?.();
      end.current = group ? keep(group, rows) : undefined;
    },
    [rows],
  );
}
