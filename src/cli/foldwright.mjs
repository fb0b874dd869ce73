#!/usr/bin/env node
// Starts the command; TypeScript is read as it is, by tsx.
import { register } from 'tsx/esm/api';

register();
await import('./main.ts');
