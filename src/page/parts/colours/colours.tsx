import { Part } from '../part.tsx';

export function Colours() {
  return (
    <Part part="colours" title="Colours" line="" onward="Go on">
      <p />
    </Part>
  );
}
