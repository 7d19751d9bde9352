import { Part } from '../part.tsx';

export function Files() {
  return (
    <Part part="files" title="Files" line="">
      <p />
    </Part>
  );
}
