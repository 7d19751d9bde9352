import { useRef, useState } from 'preact/hooks';

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
        srcdoc={html}
      />
    </>
  );
}
