import { first, rest } from 'virtual:engine';
import type { Asset } from './ask.ts';
import { lettersHere } from './letters.ts';
import { pictureOf } from './picture-of.ts';
import type { Engine, Message, Page } from './protocol.ts';
import { talkOver } from './talk.ts';
import { unpacked } from './unpacked.ts';

const script = async (packed: string): Promise<Blob> => new Blob([await unpacked(packed)], { type: 'text/javascript' });

const code = script(first).then((blob) => URL.createObjectURL(blob));
let more: Promise<Blob> | undefined;

const page: Page = {
  picture: pictureOf,
  async rest() {
    more ??= script(rest);
    return { script: await more, letters: lettersHere() };
  },
};

function begin(): Engine {
  const worker = code.then((address) => new Worker(address));
  return talkOver<Engine>(
    {
      post: async (message) => (await worker).postMessage(message),
      listen: async (take) =>
        (await worker).addEventListener('message', ({ data }: MessageEvent<Message>) => {
          take(data);
        }),
    },
    page,
  );
}

/** The engine, beside the page: the page stays awake however long it works. */
export const engine: Engine = begin();

let second: Engine | undefined;
let given: Asset[] = [];

/** A second engine for what takes long, so that the plan is redrawn meanwhile. It begins when it is first asked for. */
export function maker(): Engine {
  if (second) return second;
  second = begin();
  void second.keep(given);
  return second;
}

/** Gives both engines the files that jobs name. */
export async function keepGiven(files: Asset[]): Promise<void> {
  given = files;
  await Promise.all([engine.keep(files), second?.keep(files)]);
}
