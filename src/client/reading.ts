/** Light and size of type, as the reader chooses them; kept on this phone where it keeps anything. */
export function startReading(): void {
  const root = document.documentElement;
  for (const radio of document.querySelectorAll<HTMLInputElement>('.look input')) {
    const name = radio.name as 'light' | 'type';
    radio.checked = radio.value === (root.dataset[name] ?? '');
    radio.addEventListener('change', () => {
      if (radio.value) root.dataset[name] = radio.value;
      else delete root.dataset[name];
      try {
        if (radio.value) localStorage.setItem(`bladehand ${name}`, radio.value);
        else localStorage.removeItem(`bladehand ${name}`);
      } catch {
        // It holds for this page.
      }
    });
  }
}

/** The row of signs over the keyboard: each is put where the cursor stands. */
export function startSymbols(form: HTMLFormElement, box: HTMLTextAreaElement): void {
  // They stay when the box is left: a page that moves under a finger loses the press.
  box.addEventListener('focus', () => form.classList.add('writing'));
  form.addEventListener('submit', () => form.classList.remove('writing'));
  for (const button of document.querySelectorAll<HTMLButtonElement>('.symbols button')) {
    // The cursor stays in the box, and with it the keyboard.
    button.addEventListener('pointerdown', (event) => event.preventDefault());
    button.addEventListener('click', () => {
      const { value } = button;
      const at = box.selectionStart ?? box.value.length;
      const before = box.value.slice(0, at);
      const word = /^[a-z]/.test(value);
      const sign = `${word && /[^\s]$/.test(before) ? ' ' : ''}${value}${word ? ' ' : ''}`;
      box.setRangeText(sign, at, box.selectionEnd ?? at, 'end');
      box.focus();
    });
  }
}
