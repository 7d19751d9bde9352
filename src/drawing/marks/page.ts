import { shown } from '../../units/index.ts';
import type { Notes } from '../notes.ts';
import { refuse } from '../refusal.ts';
import { readLength } from '../syntax/length.ts';
import { readSetting, readView, type View } from '../syntax/view.ts';
import type { Element } from '../tree.ts';

/** What counts as one repeat of the drawing. */
export interface Page {
  /** In the drawing's own units. Left out where the file states none: then the drawing's own box is the repeat. */
  view?: View;
  /** Height of the repeat by its width, as it shows; differs from the view's where the file stretches it. */
  ratio?: number;
}

/** A size in px; nothing when it is left out or a share of a screen. */
function readSize(root: Element, name: 'width' | 'height'): number | undefined {
  const text = root.attributes.get(name)?.trim();
  if (text === undefined || text === 'auto' || text.endsWith('%')) return undefined;
  const size = readLength(text);
  if (size !== undefined && size > 0 && size < 1e9) return size;
  return refuse(
    'size',
    `the drawing's ${name} is "${shown(text)}"; a length above 0 is needed, such as 120mm, 5in or 400`,
    `set the page size in the drawing program, or take ${name} out of the first line of the file`,
    root.place,
  );
}

export function readPage(root: Element, notes: Notes): Page {
  const [width, height] = [readSize(root, 'width'), readSize(root, 'height')];
  const text = root.attributes.get('viewBox');
  if (text === undefined) {
    if (width !== undefined && height !== undefined) return { view: { x: 0, y: 0, width, height } };
    notes.add('The file states no page, so one repeat is as large as the drawing itself');
    return {};
  }
  const view = readView(text);
  if (view === undefined || !(view.width > 0 && view.height > 0)) {
    return refuse(
      'size',
      `the drawing's viewBox is "${shown(text)}"; four numbers are needed, of which the last two, width and height, are above 0`,
      'write for example viewBox="0 0 100 100", or set the page size in the drawing program and save again',
      root.place,
    );
  }
  const { how } = readSetting(root.attributes.get('preserveAspectRatio'));
  const slim = (width ?? 1) / (height ?? 1) / (view.width / view.height);
  if (how === 'slice' && width !== undefined && height !== undefined && Math.abs(slim - 1) > 1e-6) {
    notes.add('The file crops its edges (slice); one repeat is the whole page, uncropped');
  }
  const stretched = how === 'none' && width !== undefined && height !== undefined;
  return { view, ratio: stretched ? height / width : view.height / view.width };
}
