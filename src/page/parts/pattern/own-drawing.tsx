import { FileButton } from '../../drop/file-button.tsx';
import { giveFor } from '../../state/given.ts';
import { refuse } from '../../state/notice.ts';

/** A button for a drawing of one's own, which is kept and then taken. */
export function OwnDrawing({ take }: { take(name: string): void }) {
  return (
    <FileButton
      take={async ([file]) => {
        if (!file) return;
        if (!/\.svg$/i.test(file.name)) {
          refuse(`${file.name} is no SVG drawing; its name would end in .svg. Nothing was changed.`);
          return;
        }
        const path = `./${file.name}`;
        await giveFor(path, file);
        take(path);
      }}
    >
      Use a drawing of mine (SVG)
    </FileButton>
  );
}
