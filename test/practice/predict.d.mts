import type { Reading } from '../../core/model/reading.js';

export function prediction(reading: Reading): unknown;
export function practiceLists(): { id: string; text: string; label: { lang: string } }[];
export function bundledReader(): Promise<{ readList(text: string): Reading }>;
