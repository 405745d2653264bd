using System.Collections.Immutable;

namespace Loadmark.Core.Ratings;

/// <summary>Gathers what there is to note while figures are joined; empty for most gear, so nothing is allocated then.</summary>
internal sealed class RatingNotes
{
    private List<Disagreement>? _disagreements;
    private List<Derivation>? _derivations;

    public ImmutableArray<Disagreement> Disagreements => _disagreements is null ? [] : [.. _disagreements];

    public ImmutableArray<Derivation> Derivations => _derivations is null ? [] : [.. _derivations];

    public void Disagree(string what, string working, string outcome) =>
        (_disagreements ??= []).Add(new Disagreement(what, working, outcome));

    public void Derive(string what, string working) => (_derivations ??= []).Add(new Derivation(what, working));
}
