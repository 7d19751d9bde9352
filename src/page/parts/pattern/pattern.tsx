import { Part } from '../part.tsx';

export function Pattern() {
  return (
    <Part part="pattern" title="Pattern" line="" onward="Go on">
      <p />
    </Part>
  );
}
