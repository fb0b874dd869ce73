export interface Import {
  readonly path: string;
  readonly kind: string;
}

export function scriptOf(text: string, imports: readonly Import[]): { readonly script: string; readonly needs: readonly string[] };
