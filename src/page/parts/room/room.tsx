import { Choice, Line } from '../../fields/field.tsx';
import { Part } from '../part.tsx';

export function Room() {
  return (
    <Part part="room" title="The room" line="" onward="The room is measured">
      <Line path={['title']} label="What you call it" example="Back passage" />
      <Choice
        path={['units']}
        label="A number without a unit is in"
        options={[
          ['in', 'inches'],
          ['cm', 'centimetres'],
          ['mm', 'millimetres'],
        ]}
      />
      <Line path={['site', 'run']} kind="length" label="From threshold to threshold" example={`17' 9 7/16"`} />
      <Line
        path={['site', 'openings', 'near']}
        kind="length"
        label="Near opening, over its casing"
        example={'31 1/4"'}
      />
      <Line path={['site', 'openings', 'far']} kind="length" label="Far opening, over its casing" example={'28 3/8"'} />
    </Part>
  );
}
