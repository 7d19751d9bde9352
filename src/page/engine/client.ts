import packed from 'virtual:engine';
import { pictureOf } from './picture-of.ts';
import type { Engine, Message, Page } from './protocol.ts';
import { talkOver } from './talk.ts';

async function unpacked(base64: string): Promise<Blob> {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'));
  const code = await new Response(stream).blob();
  return new Blob([code], { type: 'text/javascript' });
}

const worker = unpacked(packed).then((code) => new Worker(URL.createObjectURL(code)));

const page: Page = { picture: pictureOf };

/** The engine, beside the page: the page stays awake however long it works. */
export const engine: Engine = talkOver<Engine>(
  {
    post: async (message) => (await worker).postMessage(message),
    listen: async (take) =>
      (await worker).addEventListener('message', ({ data }: MessageEvent<Message>) => {
        take(data);
      }),
  },
  page,
);
