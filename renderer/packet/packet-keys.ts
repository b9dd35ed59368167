/** Keys of the packet workspace. */
export const packetKeys = {
  next: { id: 'packet.next', label: 'Next page', keys: 'PageDown or ArrowRight' },
  previous: { id: 'packet.previous', label: 'Page before', keys: 'PageUp or ArrowLeft' },
  first: { id: 'packet.first', label: 'First page', keys: 'Home' },
  last: { id: 'packet.last', label: 'Last page', keys: 'End' },
  larger: { id: 'packet.larger', label: 'Larger', keys: '+ or =' },
  smaller: { id: 'packet.smaller', label: 'Smaller', keys: '-' },
  width: { id: 'packet.width', label: 'Fit the width', keys: '0' },
} as const
