/** Forms of the job page while the page under them is drawn anew. */

/** What a form is for: its act, its line, and of a clash or an undo the field and the change. */
export const keyOfForm = (form: HTMLFormElement): string =>
  ['do', 'line', 'field', 'change'].map((name) => hiddenIn(form, name)).join(' ');

const hiddenIn = (form: HTMLFormElement, name: string): string => {
  const field = form.elements.namedItem(name);
  return field instanceof HTMLInputElement && field.type === 'hidden' ? field.value : '';
};

/** True for a form in which somebody has typed or chosen something that was not sent. */
export function isBegun(form: HTMLFormElement): boolean {
  return [...form.elements].some((field) => {
    if (field instanceof HTMLTextAreaElement) return field.value !== field.defaultValue;
    if (field instanceof HTMLSelectElement)
      return [...field.options].some((option) => option.selected !== option.defaultSelected && option.value !== '');
    return field instanceof HTMLInputElement && field.type !== 'hidden' && field.value !== field.defaultValue;
  });
}

/**
 * Puts the fresh main part in the place of the old one. What was folded open stays open, and a form that was begun is moved
 * over with all that stands in it, the cursor too; where its line is gone it is put at the top, so that nothing typed is lost.
 */
export function carryOver(
  old: HTMLElement,
  fresh: HTMLElement,
  sent: HTMLFormElement | undefined,
  moved: (form: HTMLFormElement) => void,
): void {
  const active = document.activeElement;
  const cursor =
    active instanceof HTMLInputElement || active instanceof HTMLTextAreaElement ? active.selectionStart : null;
  const places = new Map([...fresh.querySelectorAll('form')].map((form) => [keyOfForm(form), form]));
  for (const details of old.querySelectorAll('details[open]')) {
    const log = details.classList.contains('log') && fresh.querySelector<HTMLDetailsElement>('details.log');
    if (log) log.open = true;
    const form = details.querySelector('form');
    if (!form || form === sent) continue;
    const place = places.get(keyOfForm(form))?.closest('details');
    if (place) place.open = true;
  }
  for (const form of old.querySelectorAll('form')) {
    if (form === sent || !isBegun(form)) continue;
    moved(form);
    const place = places.get(keyOfForm(form));
    if (place) place.replaceWith(form);
    else fresh.prepend(form);
  }
  old.replaceWith(fresh);
  if (active instanceof HTMLElement && fresh.contains(active)) {
    active.focus({ preventScroll: true });
    if (cursor !== null && (active instanceof HTMLInputElement || active instanceof HTMLTextAreaElement))
      try {
        active.setSelectionRange(cursor, cursor);
      } catch {
        // A field for dates or times has no cursor to set.
      }
  }
}
