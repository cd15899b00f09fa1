/**
 * Around each import that comes later Vite writes a function that takes one name out of it and puts it into an object of that one
 * name, so that the rest of the module can be left out. Once that is done the import itself will do: 60 bytes less, a hundred times.
 * @returns {import('vite').Plugin}
 */
export const shortImports = () => ({
  name: 'short-imports',
  apply: 'build',
  generateBundle: {
    order: 'post',
    handler: (_, bundle) => {
      for (const piece of Object.values(bundle))
        if (piece.type === 'chunk') piece.code = piece.code.replace(taken, '()=>$2');
    },
  },
});

/** `async()=>{let{Name:e}=await import(...);return{Name:e}}`, as the minifier leaves it. */
const taken = /async\(\)=>\{let(\{\w+:\w+\})=await (import\(`[^`]+`\)(?:\.then\(\w+=>\w+\.\w+\))?);return\1\}/g;
