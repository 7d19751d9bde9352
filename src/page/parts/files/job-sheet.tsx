import { useRef, useState } from 'preact/hooks';

/** On a narrow screen what stands side by side on paper stands one below the other. What is printed and what is saved know nothing of it. */
const NARROW = `<style>
@media screen {
  table { display: block; max-width: 100%; overflow-x: auto; }
  .figure svg { max-width: 100%; height: auto; }
}
@media screen and (max-width: 40rem) {
  .tall .beside.left, .beside.right, .care dl { display: block; }
  .rows, .wide .left > .lists { columns: 1; }
  section.half { display: block; width: auto; margin-right: 0; }
  .care dt { margin-top: 2mm; white-space: normal; }
  .tick .n { white-space: normal; }
}
</style>`;

/** The job sheet as it stands in its file, to read and to print. It has no scripts and stands apart from the page. */
export function JobSheet({ html }: { html: string }) {
  const frame = useRef<HTMLIFrameElement>(null);
  const [isRead, setRead] = useState(false);
  return (
    <>
      <button type="button" onClick={() => frame.current!.contentWindow!.print()}>
        Print the job sheet
      </button>
      <button type="button" aria-expanded={isRead} onClick={() => setRead(!isRead)}>
        {isRead ? 'Put the job sheet away' : 'Read the job sheet here'}
      </button>
      <iframe
        ref={frame}
        class={isRead ? 'job-sheet' : 'job-sheet away'}
        aria-hidden={!isRead}
        tabIndex={isRead ? 0 : -1}
        title="Job sheet"
        sandbox="allow-same-origin allow-modals"
        srcdoc={html.replace('</head>', () => `${NARROW}</head>`)}
      />
    </>
  );
}
