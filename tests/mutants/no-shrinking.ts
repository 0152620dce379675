import fc from 'fast-check';

// A property that fails has caught the change: what the smallest failing case is, nobody asks, and looking for it takes minutes.
fc.configureGlobal({ endOnFailure: true });
