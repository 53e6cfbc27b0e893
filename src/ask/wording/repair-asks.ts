/** How people ask which repair suits, in cue lines (see `ask/cue.ts`). */
export const repairAsks = {
  which: [
    'which|what+repair|fix|patch -next -first -lift -rate -tons -blade+patch',
    'which|what|whats check+repair|fix',
    'fix|repair it|this -how-many',
    'how fix|repair road|spot|it|this',
    'blade+patch candidate|it|or -what',
    'is blade+patch+job',
    'blade+patch+job check',
    'patch or dig|mill|cut|seal|leave',
    'is blade+patch check',
    'deep+patch or blade',
    'what do about|with road|spot|hole|crack|rut|ruts -spray|shoot|residual|residue|rate -flagger -sign -cone -need',
    'worth patch',
    'do|need anything|something|nothing rut|crack|hole|pothole|spot|dip',
    'blade|patch|fix|mill|dig|seal it|this|that @check @after -windrow -tack -lift -#length -truck -roll',
  ],
} as const;
