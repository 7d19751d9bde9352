import { Part } from '../part.tsx';

export function Marks() {
  return (
    <Part part="marks" title="Marks" line="" onward="Go on">
      <p />
    </Part>
  );
}
