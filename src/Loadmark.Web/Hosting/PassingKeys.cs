using System.Xml.Linq;
using Microsoft.AspNetCore.DataProtection.Repositories;

namespace Loadmark.Web.Hosting;

/// <summary>
/// Keeps the keys of what is protected, such as antiforgery tokens, for as long as the process lives: nothing of it need be written
/// anywhere.
/// </summary>
/// <remarks>
/// The framework's provider without a memory is not enough: a service of its own makes a key at the start all the same, and writes it into
/// the user's folder.
/// </remarks>
internal sealed class PassingKeys : IXmlRepository
{
    private readonly List<XElement> _keys = [];

    /// <inheritdoc/>
    public IReadOnlyCollection<XElement> GetAllElements()
    {
        lock (_keys)
            return [.. _keys];
    }

    /// <inheritdoc/>
    public void StoreElement(XElement element, string friendlyName)
    {
        lock (_keys)
            _keys.Add(element);
    }
}
