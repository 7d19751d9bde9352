import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';

/** A button that asks for files of this computer. */
export function FileButton({
  take,
  many = false,
  children,
}: {
  take(files: File[]): void;
  many?: boolean;
  children: ComponentChildren;
}) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" onClick={() => input.current!.click()}>
        {children}
      </button>
      <input
        ref={input}
        type="file"
        multiple={many}
        hidden
        onChange={({ currentTarget }) => {
          const files = [...(currentTarget.files ?? [])];
          currentTarget.value = '';
          if (files.length > 0) take(files);
        }}
      />
    </>
  );
}
