using Loadmark.Core.Gear;

namespace Loadmark.Planning.Problem;

/// <summary>What a lead does to polarity and plug on its way.</summary>
/// <param name="Reverses">Whether it exchanges centre and sleeve.</param>
/// <param name="Plug">The plug at its load ends; null for the outlet's own.</param>
internal readonly record struct LeadEnds(bool Reverses, Plug? Plug)
{
    /// <summary>A plain straight lead.</summary>
    public static LeadEnds Plain => default;
}
