#!/bin/sh
# Starts a browser in its own place, and writes down what it complains of.
exec "$FOLDWRIGHT_START" "$@" 2>"$FOLDWRIGHT_COMPLAINTS"
