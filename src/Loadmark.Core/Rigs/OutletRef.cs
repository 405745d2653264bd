namespace Loadmark.Core.Rigs;

/// <summary>Names one outlet of a rig: <c>brick/5</c>.</summary>
/// <param name="Supply">The supply's id.</param>
/// <param name="Outlet">The outlet's id within it.</param>
public sealed record OutletRef(string Supply, string Outlet)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Supply}/{Outlet}";
}
