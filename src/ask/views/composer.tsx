import type { UnitSystem } from '../reply.ts';
import { page } from '../wording/page.en.ts';

interface Props {
  /** What stands in the box. */
  readonly draft: string;
  readonly error?: string | undefined;
  /** Fields that carry the conversation from page to page. */
  readonly carried: Readonly<Record<string, string>>;
}

/** The question box, at the foot where the thumb is. It keeps the lines of pasted rows; where there is script, Enter sends. */
export function Composer({ draft, error, carried }: Props) {
  return (
    <form id="ask" class="composer" method="post" action="/#latest" novalidate aria-label={page.composer}>
      {Object.entries(carried).map(([name, value]) => (
        <input type="hidden" name={name} value={value} />
      ))}
      <div class="status" id="status" role="status" />
      <p class="top">
        <label for="question">{page.question}</label>
        <a href="#known">{page.facts}</a>
      </p>
      {error && (
        <p class="error" id="error">
          {error}
        </p>
      )}
      <div class="line">
        <textarea
          id="question"
          name="question"
          rows={1}
          autocomplete="off"
          autocapitalize="off"
          autocorrect="off"
          spellcheck={false}
          enterkeyhint="send"
          aria-describedby={error ? 'error hint' : 'hint'}
          aria-invalid={error ? 'true' : undefined}
        >
          {draft}
        </textarea>
        <button type="submit" class="send">
          {page.send}
        </button>
      </div>
      <Symbols />
      <p class="hint" id="hint">
        {page.hint}
      </p>
    </form>
  );
}

/** Signs that a phone's keyboard hides, and the units; only where there is script to put them in. */
const symbols = ["'", '"', '½', '¼', '¾', 'x', '/', '+', 'ft', 'in', 'sq yd', 'gal'];

function Symbols() {
  return (
    <fieldset class="symbols">
      <legend class="away">{page.symbols}</legend>
      {symbols.map((sign) => (
        <button type="button" value={sign}>
          {sign}
        </button>
      ))}
    </fieldset>
  );
}

/**
 * Enter in a field presses the first button of its form in the order of the page, and the buttons of an answer stand
 * before Send: this one, out of sight and out of the tab order, comes first and does what Send does.
 */
export function EnterButton() {
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a pixel that neither the keyboard nor a finger reaches
    <button type="submit" class="away" form="ask" tabindex={-1} aria-hidden="true">
      {page.send}
    </button>
  );
}

/** Which units the answer is to be in, where the question names none. */
export function UnitsChoice({ units }: { readonly units: UnitSystem | undefined }) {
  const { legend, typed, us, usNames, metric, metricNames } = page.units;
  return (
    <fieldset class="units">
      <legend>{legend}</legend>
      <UnitsRadio value="" label={typed} checked={units === undefined} />
      <UnitsRadio value="us" label={us} names={usNames} checked={units === 'us'} />
      <UnitsRadio value="metric" label={metric} names={metricNames} checked={units === 'metric'} />
    </fieldset>
  );
}

interface RadioProps {
  readonly value: string;
  readonly label: string;
  readonly names?: string;
  readonly checked: boolean;
}

function UnitsRadio({ value, label, names, checked }: RadioProps) {
  return (
    <label>
      <input type="radio" form="ask" name="units" value={value} checked={checked} />
      <span>
        {label}
        {names && <small> {names}</small>}
      </span>
    </label>
  );
}
