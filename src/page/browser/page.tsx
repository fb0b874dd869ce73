import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';

const place = document.getElementById('page');
if (place !== null) createRoot(place).render(<StrictMode><App /></StrictMode>);
