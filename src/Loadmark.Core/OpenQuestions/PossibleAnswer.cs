using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.OpenQuestions;

/// <summary>One way to answer a question.</summary>
/// <param name="Words">The answer in a few words: <c>centre positive</c>.</param>
/// <param name="Line">What to type into the rig file for it: <c>drive-3: { polarity: centre positive }</c>.</param>
/// <param name="Apply">The rig with the answer in it, as stated by the user.</param>
public sealed record PossibleAnswer(string Words, string Line, Func<Rig, Rig> Apply)
{
    /// <summary>
    /// The worst of the findings that the answer brings and not every other answer does; good for none. It is told as if everything else
    /// that is not known were as it usually is, unless the answers differ only as the rig stands.
    /// </summary>
    public Severity LeadsTo { get; init; }
}
