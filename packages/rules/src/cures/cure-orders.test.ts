import { describe, expect, it } from 'vitest';
import { cureKinds, cureOrders, cureOrderSource } from './cure-orders.js';

describe('the order of cures', () => {
  it.each(Object.entries(cureOrders))('for %s names each cure once', (_, { order }) => {
    expect(new Set(order).size).toBe(order.length);
    expect(order.length).toBeGreaterThan(0);
  });

  it('uses every kind of cure for something', () => {
    const used = new Set(Object.values(cureOrders).flatMap(({ order }) => order));
    expect([...used].sort()).toEqual([...cureKinds].sort());
  });

  it('takes the cause away before anything is rebuilt, and changes the appliance last', () => {
    for (const finding of ['depressurization', 'draft or spillage'] as const) {
      const { order } = cureOrders[finding];
      expect(order.at(-1)).toBe('sealed appliance');
      expect(order.indexOf('remove exhaust')).toBeLessThan(order.indexOf('make-up air'));
      expect(order.indexOf('cap the speed')).toBeLessThan(order.indexOf('interlock'));
    }
  });

  it('begins with stopping and leaving where gas may be in the room', () => {
    for (const finding of ['draft or spillage', 'carbon monoxide'] as const) {
      expect(cureOrders[finding].atOnce.join(' ')).toMatch(/stop the appliance.*leave.*call/);
    }
    expect(cureOrderSource.status).toBe('common practice, no source');
  });
});
