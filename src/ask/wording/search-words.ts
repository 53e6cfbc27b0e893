/** Words that ask and do not tell what about: the search leaves them out while there is another word to go by. */
export const askingWords: ReadonlySet<string> = new Set(
  'right-there must what when where who whose which how why whats check can how-many how-far how-fast need want should could there here about now anything something thing any some not no dont cant doesnt didnt isnt wont through tell know like still no-one use set at be go come came going put make made out up way mean meaning since this in onto into his their them im ive were says said say saying keep keeps call called calls been has until till while'.split(
    ' ',
  ),
);
