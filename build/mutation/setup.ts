import fc from 'fast-check';

/** That a property fails is enough to kill a mutant; the smallest counterexample is not looked for. */
fc.configureGlobal({ endOnFailure: true });
