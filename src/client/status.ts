interface Action {
  readonly text: string;
  readonly act: () => void;
}

/** Says one thing at the question box, and offers buttons with it; the next thing said takes its place. */
export function say(text: string, ...actions: readonly Action[]): void {
  const place = document.getElementById('status');
  if (!place) return;
  place.replaceChildren();
  if (text === '') return;
  const words = document.createElement('span');
  words.textContent = text;
  place.append(words, ...actions.map(({ text: label, act }) => button(label, act)));
}

function button(text: string, act: () => void): HTMLButtonElement {
  const made = document.createElement('button');
  made.type = 'button';
  made.className = 'do';
  made.textContent = text;
  made.addEventListener('click', () => {
    say('');
    act();
  });
  return made;
}

/** Says at the foot of the page how it stands with signal and rules, and offers buttons with it. */
export function tellFoot(text: string, ...actions: readonly Action[]): void {
  const place = document.getElementById('phone');
  if (place && place.textContent !== text + actions.map(({ text: label }) => label).join(''))
    place.replaceChildren(text, ...actions.map(({ text: label, act }) => button(label, act)));
}
