#!/usr/bin/env node
import '../dist/sedgeline.mjs';
