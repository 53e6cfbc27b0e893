/** Head words that ask for a figure. */
export const figureAsks: readonly string[] = ['how-many', 'how-far', 'how-fast'];

/** Head words that ask for a figure or a thing. */
export const askingHeads: readonly string[] = [...figureAsks, 'how', 'what', 'which', 'where'];

/** Every head word that opens a question. */
export const openingHeads: readonly string[] = [...askingHeads, 'when', 'who', 'why'];
