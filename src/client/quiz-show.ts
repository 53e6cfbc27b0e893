/** Puts a screen of the quiz in the place of the one that stands: its title, its body, and the focus where it reads on. */
export function showScreen(html: string, at?: string): void {
  const made = new DOMParser().parseFromString(html, 'text/html');
  document.title = made.title;
  document.body.replaceChildren(...made.body.childNodes);
  const place = (at && document.getElementById(at)) || document.querySelector<HTMLElement>('main');
  place?.scrollIntoView();
  place?.focus({ preventScroll: true });
}

/** Says something at the top of the screen, read out. */
export function notice(text: string): void {
  const made = document.createElement('p');
  made.className = 'notice';
  made.setAttribute('role', 'status');
  document.querySelector('main')?.prepend(made);
  // Put in after the region stands, so that it is read out.
  made.textContent = text;
  made.scrollIntoView({ block: 'nearest' });
}

/** The fields of a form, the button that sent it among them. */
export const fieldsOf = (form: HTMLFormElement, button: HTMLElement | null): FormData => new FormData(form, button);
