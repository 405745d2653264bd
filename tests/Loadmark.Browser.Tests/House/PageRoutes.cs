using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Loadmark.Browser.Tests.House;

/// <summary>
/// The addresses that the page has, read from the program as it was built: whoever adds a page adds its route here without knowing. The library
/// is only read, not loaded, since what it needs to run is the program's and not the tests'.
/// </summary>
internal static class PageRoutes
{
    private const string Attribute = "RouteAttribute";

    /// <summary>Each route as its page declares it: <c>/rig/{Id:guid}</c>.</summary>
    public static IReadOnlySet<string> All { get; } = Read(Path.Combine(Path.GetDirectoryName(BuiltProgram.File)!, "Loadmark.Web.dll"));

    private static HashSet<string> Read(string library)
    {
        using var file = new PEReader(File.OpenRead(library));
        var types = file.GetMetadataReader();
        return
        [
            .. from handle in types.TypeDefinitions
               from one in types.GetTypeDefinition(handle).GetCustomAttributes()
               let attribute = types.GetCustomAttribute(one)
               where NameOf(types, attribute.Constructor) == Attribute
               select TemplateOf(types.GetBlobReader(attribute.Value)),
        ];
    }

    private static string NameOf(MetadataReader types, EntityHandle constructor) =>
        constructor.Kind == HandleKind.MemberReference && types.GetMemberReference((MemberReferenceHandle)constructor).Parent is { Kind: HandleKind.TypeReference } parent
            ? types.GetString(types.GetTypeReference((TypeReferenceHandle)parent).Name)
            : "";

    /// <summary>The one argument of the attribute, after the mark that each value of an attribute begins with (ECMA-335, II.23.3).</summary>
    private static string TemplateOf(BlobReader value)
    {
        value.ReadUInt16();
        return value.ReadSerializedString() ?? "";
    }
}
