import { useSignal, useSignalEffect } from '@preact/signals';
import { useEffect, useId, useLayoutEffect, useRef } from 'preact/hooks';
import type { Issue } from '../../../../issue.ts';
import { FileButton } from '../../../drop/file-button.tsx';
import { maker } from '../../../engine/client.ts';
import type { Floor } from '../../../engine/colours-floor.ts';
import { Line, Wrong } from '../../../fields/field.tsx';
import { useStops } from '../../../fields/stops.ts';
import { isDrawn, look, text } from '../../../state/answer.ts';
import { give, given } from '../../../state/given.ts';
import { base, chosen, endStep, say, sayAll, tree } from '../../../state/job.ts';
import { refuse } from '../../../state/notice.ts';
import { textAt, valueAt } from '../../../state/tree.ts';
import { save } from '../../files/save.ts';
import { such } from '../../room/examples.ts';
import { KEYS } from '../by-keys.tsx';
import { asTold, begun, type Corners, cornersIn, PHOTO, tellPhoto } from './photo.ts';
import { Stage } from './stage.tsx';
import { Worn } from './worn.tsx';
import './floor.css';

/** Pixels of the longer side: while a corner is moved, and when all is still. */
const [ROUGH, FULL] = [480, 1600];
/** The job has to be left alone so long, ms. */
const REST = 350;

const sentence = ({ says, hint }: Issue): string =>
  `${says.charAt(0).toUpperCase()}${says.slice(1)}.${hint ? ` Try: ${hint}.` : ''}`;

async function takePhoto(file: File | undefined): Promise<void> {
  if (!file) return;
  if (!/\.(png|jpe?g)$/i.test(file.name)) {
    refuse(`${file.name} is no JPEG or PNG. Open it in a picture viewer and save it again as one of these.`);
    return;
  }
  const path = `./${file.name}`;
  await give([{ path, bytes: new Uint8Array(await file.arrayBuffer()) }]);
  endStep();
  if (valueAt(tree.value, PHOTO) === undefined) begun.value = { file: path, across: '', along: '' };
  else say([...PHOTO, 'file'], path);
}

/** A line of a photo that the job is not told of yet. */
function Begun({ side, label, example }: { side: 'across' | 'along'; label: string; example: string }) {
  const id = useId();
  return (
    <div class="field length">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        value={begun.value?.[side] ?? ''}
        placeholder={`such as ${example}`}
        autocomplete="off"
        onInput={({ currentTarget: { value } }) => {
          if (begun.value) begun.value = { ...begun.value, [side]: value };
        }}
        onBlur={tellPhoto}
        onKeyDown={({ key }) => key === 'Enter' && tellPhoto()}
      />
    </div>
  );
}

function Rectangle({ isTold }: { isTold: boolean }) {
  const [wide, long] = ['Its width, across the work', 'Its length, along the work'];
  return (
    <>
      <p class="usual">
        A rectangle on the floor in the photo: boards, tiles, a mat, or tape laid for it; the larger, the truer. Move
        the four corners onto its corners, and tell its size. Near and far as you stand at the near end and look along
        the work.
      </p>
      <div class="pair">
        {isTold ? (
          <>
            <Line
              path={[...PHOTO, 'rectangle', 'across']}
              kind="length"
              label={wide}
              example={such('30"', '75')}
              stays
            />
            <Line
              path={[...PHOTO, 'rectangle', 'along']}
              kind="length"
              label={long}
              example={such("8'", '240')}
              stays
            />
          </>
        ) : (
          <>
            <Begun side="across" label={wide} example={such('30"', '75')} />
            <Begun side="along" label={long} example={such("8'", '240')} />
          </>
        )}
      </div>
    </>
  );
}

function Place() {
  const name = useId();
  const at = valueAt(tree.value, [...PHOTO, 'at']);
  const put = (isOff: boolean): void => {
    endStep();
    const nothing = such('0 in', '0');
    sayAll([[[...PHOTO, 'at'], isOff ? { across: nothing, along: nothing } : undefined]], 'where the work lies');
  };
  return (
    <fieldset class="field choice">
      <legend>Where the work lies</legend>
      <div class="options">
        <label>
          <input type="radio" name={name} checked={at === undefined} onChange={() => put(false)} />
          <span>centred on the rectangle</span>
        </label>
        <label>
          <input type="radio" name={name} checked={at !== undefined} onChange={() => put(true)} />
          <span>so far from its near left corner</span>
        </label>
      </div>
      {at !== undefined && (
        <div class="pair">
          <Line
            path={[...PHOTO, 'at', 'across']}
            kind="length"
            label="To the right; with − to the left"
            example={such('4"', '10')}
            stays
          />
          <Line
            path={[...PHOTO, 'at', 'along']}
            kind="length"
            label="Beyond it; with − before it"
            example={such('-6"', '-15')}
            stays
          />
        </div>
      )}
      <Wrong path={[...PHOTO, 'at']} />
    </fieldset>
  );
}

/** The work from straight above, where there is no photo. */
function Above({ picture }: { picture: ImageBitmap | undefined }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useLayoutEffect(() => {
    const pen = canvas.current?.getContext('2d');
    if (!pen || !picture) return;
    pen.canvas.width = picture.width;
    pen.canvas.height = picture.height;
    pen.drawImage(picture, 0, 0);
  }, [picture]);
  return picture ? (
    <canvas class="above" ref={canvas} role="img" aria-label={`The work from straight above, as it will look.`} />
  ) : null;
}

async function savePicture(picture: ImageBitmap, name: string): Promise<void> {
  const canvas = document.createElement('canvas');
  canvas.width = picture.width;
  canvas.height = picture.height;
  canvas.getContext('2d')!.drawImage(picture, 0, 0);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (blob) save(name, new Uint8Array(await blob.arrayBuffer()));
}

/** What the work will look like: on the floor of a photo, new or worn. */
function Look() {
  const acts = useStops();
  const floor = useSignal<Floor | undefined>(undefined);
  const says = useSignal<readonly string[]>([]);
  const moving = useSignal<Corners | undefined>(undefined);
  const busy = useRef(false);
  const file = textAt(tree.value, [...PHOTO, 'file']);
  const isTold = valueAt(tree.value, PHOTO) !== undefined;
  const path = isTold ? file : begun.value?.file;
  const base_ = path?.split(/[\\/]/).at(-1);
  const photo = given.value.find((one) => one.path === path) ?? given.value.find((one) => one.path === base_);
  const corners = moving.value ?? (isTold ? cornersIn(tree.value) : begun.value?.corners);

  const paint = async (longSide: number, at?: Corners): Promise<void> => {
    const ask = { base: base.peek(), tree: tree.peek(), chosen: chosen.peek() };
    const found = await maker()
      .floor(ask, { longSide, ...(at ? { corners: at } : {}) })
      .catch((error: unknown) => String(error).split('\n')[0]!);
    if (typeof found === 'string') says.value = [found];
    else if (found.ok) {
      floor.value = found.value;
      says.value = found.value.says;
    } else {
      floor.value = undefined;
      says.value = found.issues.map(sentence);
    }
  };
  useSignalEffect(() => {
    text.value;
    given.value;
    if (!isDrawn.value) return undefined;
    const timer = setTimeout(() => void paint(FULL), REST);
    return () => clearTimeout(timer);
  });
  const move = async (to: Corners): Promise<void> => {
    moving.value = to;
    if (!isTold || busy.current) return;
    busy.current = true;
    while (moving.peek()) {
      const at = moving.peek()!;
      await paint(ROUGH, at);
      if (moving.peek() === at) break;
    }
    busy.current = false;
  };
  const rest = (to: Corners): void => {
    moving.value = undefined;
    if (isTold) {
      sayAll([[[...PHOTO, 'corners'], asTold(to)]], 'corners of the photo', 'preview.photo.corners');
    } else if (begun.value) {
      begun.value = { ...begun.value, corners: to };
      tellPhoto();
    }
  };
  const name = look.value?.job.name ?? 'floor';
  return (
    <>
      {path && photo && (
        <Stage
          bytes={photo.bytes}
          corners={corners}
          laid={floor.value?.inPhoto ? floor.value.picture : undefined}
          move={(to) => void move(to)}
          rest={rest}
        />
      )}
      {path && !photo && <p class="usual">The photo {path} is not here; choose it again.</p>}
      {!path && <Above picture={floor.value?.picture} />}
      <div role="status">
        {says.value.map((one) => (
          <p class="told" key={one}>
            {one}
          </p>
        ))}
      </div>
      <div class="acts" ref={acts}>
        <FileButton take={([one]) => void takePhoto(one)}>
          {path ? 'Choose another photo' : 'Choose a photo of the floor'}
        </FileButton>
        {path && (
          <button
            type="button"
            onClick={() => {
              begun.value = undefined;
              endStep();
              if (isTold) say(PHOTO, undefined);
            }}
          >
            Take the photo away
          </button>
        )}
        {floor.value && (
          <button
            type="button"
            onClick={() =>
              void savePicture(floor.value!.picture, `${name}-preview${floor.value!.inPhoto ? '-floor' : ''}.png`)
            }
          >
            Save the picture
          </button>
        )}
      </div>
      <Wrong path={[...PHOTO, 'file']} />
      {path && <Rectangle isTold={isTold} />}
      {isTold && <Place />}
      <Wrong path={PHOTO} />
      <details>
        <summary>When it is not new</summary>
        <p class="usual">A guess, for the picture only; no stencil changes by it.</p>
        <Worn />
      </details>
    </>
  );
}

/** The picture is painted once somebody comes near it. */
export function OnTheFloor() {
  const isNear = useSignal(false);
  const section = useRef<HTMLElement>(null);
  useEffect(() => {
    const watch = new IntersectionObserver(
      (entries) => {
        if (entries.some((entry) => entry.isIntersecting)) isNear.value = true;
      },
      { rootMargin: '400px' },
    );
    watch.observe(section.current!);
    return () => watch.disconnect();
  }, []);
  return (
    <section class="group" ref={section} aria-labelledby="colours-floor" aria-describedby={KEYS}>
      <h3 id="colours-floor">On your floor</h3>
      {isNear.value && <Look />}
      <Wrong path={['preview']} />
    </section>
  );
}
