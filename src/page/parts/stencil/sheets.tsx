import { writeLength } from '../../../units/index.ts';
import { counted } from '../../../words.ts';
import type { ToldSheet } from '../../engine/told-files.ts';
import { isMade, look, made } from '../../state/answer.ts';
import { sheetDrawing } from './sheet-drawing.ts';

/** One sheet, small: the film, what is cut out of it dark, its keys ringed. */
function Sheet({ sheet, svg }: { sheet: ToldSheet; svg: string }) {
  const { across, along, windows, keys } = sheetDrawing(svg);
  const { units, step } = look.value!.job;
  const length = (mm: number): string => writeLength(mm, units, step);
  const size = `${length(across)} × ${length(along)}`;
  const laid = `laid ${counted(sheet.laid, 'time')}${sheet.passes > 1 ? ` in ${sheet.passes} rounds, one dry before the next` : ''}`;
  const alt = `${sheet.file}: ${size}, ${counted(sheet.windows, 'opening')}, ${counted(keys.length, 'key')}, ${laid}.`;
  return (
    <li>
      <svg class="film-sheet" viewBox={`0 0 ${across} ${along}`} role="img" aria-label={alt}>
        <rect class="film" width={across} height={along} />
        {windows.map((d) => (
          <path class="open" key={d} d={d} />
        ))}
        {keys.map((d) => (
          <path class="key" key={d} d={d} />
        ))}
      </svg>
      <p>
        <b>{sheet.colour}</b>: {sheet.says}
      </p>
      <p class="soft">
        {size}, {laid}
      </p>
      <p class="soft file-name">{sheet.file}</p>
    </li>
  );
}

/** The sheets that were made, as small drawings. */
export function Sheets() {
  const files = made.value;
  if (!files?.told || !look.value) return null;
  const { sheets } = files.told;
  if (sheets.length === 0) return <p>This work needs no sheet: everything is masked with tape.</p>;
  return (
    <ul class={isMade.value ? 'films' : 'films stale'}>
      {sheets.map((sheet) => (
        <Sheet key={sheet.file} sheet={sheet} svg={String(files.files.get(sheet.file))} />
      ))}
    </ul>
  );
}
