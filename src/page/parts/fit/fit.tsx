import { Part } from '../part.tsx';

export function Fit() {
  return (
    <Part part="fit" title="Fit" line="" onward="Go on">
      <p />
    </Part>
  );
}
