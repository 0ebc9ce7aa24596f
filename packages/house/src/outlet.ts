/** The four outside walls, named as one stands at the street looking at the front. */
export type Face = 'front' | 'right' | 'back' | 'left';

/** Where an opening, leak or device ends: open air without wind, one face, the roof, a zone or a surrounding. */
export type Outlet =
  | { readonly kind: 'outdoors' }
  | { readonly kind: 'face'; readonly face: Face }
  | { readonly kind: 'roof' }
  | { readonly kind: 'zone'; readonly zone: string }
  | { readonly kind: 'surrounding'; readonly surrounding: string };

/** How an opening stood during the airtightness test; anything but sealed is inside the test's result. */
export type TestPreparation = 'sealed' | 'closed' | 'open';
