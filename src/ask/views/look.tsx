import { page } from '../wording/page.en.ts';

/** Light and size of type for these eyes; shown only where there is script to keep them. */
export function Look() {
  const { heading, type, types, light, lights } = page.look;
  return (
    <details class="look">
      <summary>{heading}</summary>
      <Choice name="type" legend={type} options={types} />
      <Choice name="light" legend={light} options={lights} />
    </details>
  );
}

interface Props {
  readonly name: string;
  readonly legend: string;
  readonly options: Readonly<Record<string, string>>;
}

function Choice({ name, legend, options }: Props) {
  return (
    <fieldset class="units">
      <legend>{legend}</legend>
      {Object.entries(options).map(([value, label]) => (
        <label>
          <input type="radio" name={name} value={value} checked={value === ''} />
          <span>{label}</span>
        </label>
      ))}
    </fieldset>
  );
}
