import { Part } from '../part.tsx';

export function Stencil() {
  return (
    <Part part="stencil" title="Stencil" line="" onward="Go on">
      <p />
    </Part>
  );
}
