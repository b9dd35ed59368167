export function share(kind: 'all' | 'none'): number {
  switch (kind) {
    case 'all':
      return 100
  }
  return 0
}
