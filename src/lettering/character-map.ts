import { damaged } from './bad-font.ts';

/** The last character of Unicode. */
const LAST = 0x10ffff;
/** A map by segments knows 65536 characters; segments of a damaged one may lie over each other. */
const MOST_IN_SEGMENTS = 2 * 0x10000;

/** Whether the groups of a map lie in order, one behind the other, within Unicode. */
function areGroupsSound(view: DataView, at: number): boolean {
  const count = view.getUint32(at + 12);
  if (at + 16 + 12 * count > view.byteLength) return false;
  let before = -1;
  for (let n = 0; n < count; n++) {
    const [from, to] = [view.getUint32(at + 16 + 12 * n), view.getUint32(at + 20 + 12 * n)];
    if (from <= before || to < from || to > LAST) return false;
    before = to;
  }
  return true;
}

function areSegmentsSound(view: DataView, at: number): boolean {
  const count = view.getUint16(at + 6) >> 1;
  if (at + 16 + 8 * count > view.byteLength) return false;
  let characters = 0;
  for (let n = 0; n < count; n++) {
    const [to, from] = [view.getUint16(at + 14 + 2 * n), view.getUint16(at + 16 + 2 * (count + n))];
    characters += Math.max(0, to - from + 1);
  }
  return characters <= MOST_IN_SEGMENTS;
}

/**
 * Looks through the table of which letter stands for which character, for counts that a reader would follow without end
 * (OpenType 1.9, "cmap": formats 4, 12 and 13).
 * @throws BadFont
 */
export function guardCharacterMap(table: Uint8Array): void {
  const view = new DataView(table.buffer, table.byteOffset, table.byteLength);
  const count = table.length < 4 ? 0 : view.getUint16(2);
  for (let n = 0; n < count; n++) {
    if (4 + 8 * (n + 1) > table.length) throw damaged();
    const at = view.getUint32(4 + 8 * n + 4);
    if (at + 16 > table.length) continue;
    const format = view.getUint16(at);
    const isSound =
      format === 4 ? areSegmentsSound(view, at) : format === 12 || format === 13 ? areGroupsSound(view, at) : true;
    if (!isSound) throw damaged();
  }
}
