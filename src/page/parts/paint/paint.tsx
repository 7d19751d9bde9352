import { Part } from '../part.tsx';

export function Paint() {
  return (
    <Part part="paint" title="Paint" line="" onward="Go on">
      <p />
    </Part>
  );
}
