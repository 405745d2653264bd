using Loadmark.Storage.Entities;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Loadmark.Storage.Tests.Schemas;

/// <summary>The released migrations, as a later program has them among its own.</summary>
internal static class AsReleased
{
    [DbContext(typeof(StorageContext))]
    [Migration("20261125190152_Rigs")]
    internal sealed class Rigs : Storage.Migrations.Rigs;

    [DbContext(typeof(StorageContext))]
    [Migration("20261125230125_Gear")]
    internal sealed class Gear : Storage.Migrations.Gear;

    [DbContext(typeof(StorageContext))]
    [Migration("20261130164935_Seals")]
    internal sealed class Seals : Storage.Migrations.Seals;

    [DbContext(typeof(StorageContext))]
    [Migration("20261201015715_Acceptances")]
    internal sealed class Acceptances : Storage.Migrations.Acceptances;
}
