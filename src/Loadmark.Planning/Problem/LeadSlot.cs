using System.Collections.Immutable;

namespace Loadmark.Planning.Problem;

/// <summary>One lead on hand that may make a feed of its own kind: a chain, a series or a parallel lead.</summary>
/// <param name="Kind">Which leads are alike: slots of one kind may be exchanged.</param>
/// <param name="Least">The fewest loads worth putting on it: two for a chain, one where the lead does more than split.</param>
/// <param name="Plugs">The most loads it has plugs for.</param>
/// <param name="Reverses">Whether it exchanges centre and sleeve.</param>
/// <param name="Sources">What it may take from.</param>
internal sealed record LeadSlot(int Kind, int Least, int Plugs, bool Reverses, ImmutableArray<Source> Sources);
